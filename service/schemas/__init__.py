"""Schemas: what a request may hold and what an answer holds; the contract is written from them."""
