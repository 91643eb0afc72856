"""All small changes of a module, as pieces of text to put in another's place."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import libcst as cst
from libcst.metadata import MetadataWrapper, PositionProvider
from mutmut.mutation.file_mutation import MutationVisitor
from mutmut.mutation.mutators import mutation_operators, operator_swap_op
from mutmut.mutation.pragma_handling import IgnoredCode

#: How far a number at the top of a module is moved, up and down.
TENTH = 0.1
TABLE = "table"  # kind of a change outside all functions


@dataclass(frozen=True, slots=True)
class Mutant:
    """One change: the text from `start` to `end` becomes `new`.

    `lines` are those of the statement it lies in; `where` is the function, or 'table' outside.
    """

    file: str
    line: int
    start: int
    end: int
    old: str
    new: str
    where: str
    lines: tuple[int, int]

    @property
    def key(self) -> str:
        return f"{self.file}:{self.start}:{self.end}:{self.new}"

    def applied(self, source: str) -> str:
        return source[: self.start] + self.new + source[self.end :]


class _Visitor(MutationVisitor):
    """As mutmut's, and into functions with decorators, though not into the decorators."""

    def _skip_node_and_children(self, node: cst.CSTNode) -> bool:
        if isinstance(node, cst.FunctionDef) and node.decorators:
            return False
        return super()._skip_node_and_children(node)


class _Numbers(cst.CSTVisitor):
    """Each number outside the functions a tenth up and down, and each operation another."""

    METADATA_DEPENDENCIES = (PositionProvider,)

    def __init__(self) -> None:
        self.found: list[tuple[cst.CSTNode, str]] = []

    def visit_FunctionDef(self, node: cst.FunctionDef) -> bool:
        return False

    def visit_Lambda(self, node: cst.Lambda) -> bool:
        return False

    def visit_Annotation(self, node: cst.Annotation) -> bool:
        return False

    def visit_Integer(self, node: cst.Integer) -> None:
        value = node.evaluated_value
        step = max(1, round(abs(value) * TENTH))
        self.found += [(node, repr(value + step)), (node, repr(value - step))]

    def visit_Float(self, node: cst.Float) -> None:
        value = node.evaluated_value
        moved = (value * (1 + TENTH), value * (1 - TENTH)) if value else (TENTH, -TENTH)
        self.found += [(node, repr(float(f"{v:.12g}"))) for v in moved]

    def visit_BinaryOperation(self, node: cst.BinaryOperation) -> None:
        self.found += [(node, _code(changed)) for changed in operator_swap_op(node)]

    def visit_Comparison(self, node: cst.Comparison) -> None:
        for part in node.comparisons:
            self.found += [(part, _code(changed)) for changed in operator_swap_op(part)]


def _code(node: cst.CSTNode) -> str:
    if isinstance(node, cst.BaseExpression):  # parentheses stay where they are
        node = node.with_changes(lpar=[], rpar=[])
    text = cst.Module(body=[]).code_for_node(node)
    return f" {text.strip()} " if isinstance(node, cst.ComparisonTarget) else text


def mutants(path: Path, root: Path) -> list[Mutant]:
    """The changes of a module, by their place in it."""
    source = path.read_text("utf-8")
    places = _places(ast.parse(source))
    starts = [0]
    for line in source.splitlines(keepends=True):
        starts.append(starts[-1] + len(line))
    file = path.relative_to(root).as_posix()
    found: dict[str, Mutant] = {}
    for (first, last), new in _changes(source):
        start = starts[first[0] - 1] + first[1]
        end = starts[last[0] - 1] + last[1]
        where, lines = _place(places, first[0])
        one = Mutant(file, first[0], start, end, source[start:end], new, where, lines)
        if one.new.strip() != one.old.strip():
            found.setdefault(one.key, one)
    return sorted(found.values(), key=lambda m: (m.start, m.end, m.new))


_Span = tuple[tuple[int, int], tuple[int, int]]


def _changes(source: str) -> Iterator[tuple[_Span, str]]:
    wrapper = MetadataWrapper(cst.parse_module(source))
    positions = wrapper.resolve(PositionProvider)

    def span(node: cst.CSTNode) -> _Span:
        at = positions[node]
        return (at.start.line, at.start.column), (at.end.line, at.end.column)

    within = _Visitor(mutation_operators, IgnoredCode(set(), set(), set()))
    wrapper.visit(within)
    for change in within.mutations:
        # mutmut counts what stands in the body of a class to a function of its own
        if isinstance(change.contained_by_top_level_function, cst.FunctionDef):
            yield span(change.original_node), _code(change.mutated_node)
    numbers = _Numbers()
    wrapper.visit(numbers)
    for node, new in numbers.found:
        yield span(node), new


def _places(tree: ast.Module) -> list[tuple[int, int, str, tuple[int, int]]]:
    """First and last line, function and lines that are run together, of all statements."""
    found = []

    def walk(node: ast.AST, name: str) -> None:
        for child in ast.iter_child_nodes(node):
            if not isinstance(child, ast.stmt):
                if not isinstance(child, ast.expr):
                    walk(child, name)  # an except clause, a case
                continue
            inner = name
            body = getattr(child, "body", None)
            last = child.end_lineno or child.lineno
            head = body[0].lineno - 1 if body else last
            if isinstance(child, ast.FunctionDef | ast.ClassDef):
                inner = f"{name}.{child.name}".lstrip(".")
            function = isinstance(child, ast.FunctionDef)
            # a default value counts for all that the function does
            span = (body[0].lineno, last) if function and body else (child.lineno, head)
            found.append((child.lineno, max(head, child.lineno), inner, span))
            walk(child, inner)

    walk(tree, "")
    functions = [
        (n.lineno, n.end_lineno or n.lineno)
        for n in ast.walk(tree)
        if isinstance(n, ast.FunctionDef)
    ]
    return [
        (a, b, name if any(f <= a <= e for f, e in functions) else TABLE, span)
        for a, b, name, span in found
    ]


def _place(
    places: list[tuple[int, int, str, tuple[int, int]]], line: int
) -> tuple[str, tuple[int, int]]:
    around = [p for p in places if p[0] <= line <= p[1]]
    _, _, where, lines = min(around, key=lambda p: p[1] - p[0])
    return where, lines
