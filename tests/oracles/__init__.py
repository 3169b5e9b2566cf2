"""Other ways to the same answers: brute force, a constraint solver, and a reader of written instructions."""
