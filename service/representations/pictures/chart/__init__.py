"""Charts, with where a pullover starts in them."""
