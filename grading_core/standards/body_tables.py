"""The built-in body tables, by the names that requests use."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from grading_core.standards.babies import BABIES
from grading_core.standards.body import BodyTable
from grading_core.standards.children import CHILDREN
from grading_core.standards.men import MEN
from grading_core.standards.women import WOMEN

BODY_TABLES: Mapping[str, BodyTable] = MappingProxyType({table.name: table for table in (WOMEN, MEN, CHILDREN, BABIES)})
"""By name: women, men, children, babies."""


def body_table(name: str) -> BodyTable:
    """A built-in body table.

    name: "women", "men", "children" or "babies".

    Raises KeyError for another name.

    >>> body_table("women").labels[:3]
    ('XS', 'S', 'M')
    """
    return BODY_TABLES[name]
