"""One increase schedule, its adjustment, and all sizes of a request."""
