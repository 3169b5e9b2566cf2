"""Pages of HTML to print."""
