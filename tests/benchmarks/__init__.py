"""What the service costs. Run by deploy/bench.sh and never by the tests, which test how it is put together."""
