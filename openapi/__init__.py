"""The contract and its examples, and how they are generated."""
