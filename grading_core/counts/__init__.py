"""The counts of all sizes at once: targets, rules, candidates and the optimum."""
