"""Clients generated from the contract, run against the service."""
