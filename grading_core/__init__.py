"""The craft of grading hand-knitted pullovers: pure computation, standard library only."""
