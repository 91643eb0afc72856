"""Everything that can go wrong in the records, one class a reason.

`Refused`: what was asked cannot be done, and nothing was written; the person can be told why.
`DatabaseProblem`: the database cannot serve; the operator can be told why.
"""

from __future__ import annotations

from collections.abc import Mapping


class RecordsError(Exception):
    """Base of every error the records raise on purpose."""


class Refused(RecordsError):
    """What was asked cannot be done; nothing was written."""


class UnknownOwner(Refused):
    """No owner has this id."""

    def __init__(self, owner_id: int) -> None:
        super().__init__(f"no owner {owner_id}")
        self.owner_id = owner_id


class OwnerExists(Refused):
    """The address is taken by another owner."""

    def __init__(self, owner_id: int) -> None:
        super().__init__(f"the address belongs to owner {owner_id}")
        self.owner_id = owner_id


class NotOnRecord(Refused):
    """The owner has no such plant, product, water or place."""

    def __init__(self, table: str, row_id: int) -> None:
        super().__init__(f"no {table} {row_id} of this owner")
        self.table = table
        self.row_id = row_id


class NameTaken(Refused):
    """The owner already has a plant, product or water of this name."""

    def __init__(self, table: str, name: str, row_id: int) -> None:
        super().__init__(f"{table} {row_id} is already called {name!r}")
        self.table = table
        self.name = name
        self.row_id = row_id


class BadValue(Refused):
    """A value does not fit its field."""

    def __init__(self, table: str, field: str, reason: str) -> None:
        super().__init__(f"{table}.{field}: {reason}")
        self.table = table
        self.field = field
        self.reason = reason


class TooMany(Refused):
    """The owner would have more rows of a table than are allowed."""

    def __init__(self, table: str, most: int) -> None:
        super().__init__(f"at most {most} rows of {table} for one owner")
        self.table = table
        self.most = most


class NothingToUndo(Refused):
    """Nothing in the log is left to reverse."""


class ChangedSince(Refused):
    """It is not what was read any more: somebody else changed it before this was written."""


class OthersSince(Refused):
    """Another member of a group changed the same since; theirs has to be taken back first."""


class CannotUndo(Refused):
    """The log does not fit what is on record; only an import that was edited can do that."""


class ImportRefused(Refused):
    """An export file cannot be taken in; nothing was written."""


class BrokenFile(ImportRefused):
    """The file is not readable as the format it should be in."""


class ForeignFile(ImportRefused):
    """The file is readable, and not one of our exports."""


class NewerFile(ImportRefused):
    """The file was written by a newer version of the program."""

    def __init__(self, found: int, known: int) -> None:
        super().__init__(f"the file has format version {found}, this program reads up to {known}")
        self.found = found
        self.known = known


class FileTooLarge(ImportRefused):
    """The file is larger than is read."""

    def __init__(self, size: int, most: int) -> None:
        super().__init__(f"the file has {size} characters, at most {most} are read")
        self.size = size
        self.most = most


class HasProblems(ImportRefused):
    """The preview of the file lists problems."""


class AlreadyHasRecords(ImportRefused):
    """The owner has records, which an import would have to replace."""

    def __init__(self, counts: Mapping[str, int]) -> None:
        super().__init__("the owner already has records")
        self.counts = dict(counts)


class DatabaseProblem(RecordsError):
    """The database cannot serve."""


class UnsupportedUrl(DatabaseProblem):
    """The database URL is not one of the supported kinds."""


class DatabaseUnreachable(DatabaseProblem):
    """The database cannot be opened, or the connection to it was lost."""


class DiskFull(DatabaseProblem):
    """There is no room to write on the disk of the database; nothing was written."""


class DatabaseBusy(DatabaseProblem):
    """The database stayed locked for longer than we wait."""


class CannotWrite(DatabaseProblem):
    """The session is one for reading, or the database can only be read."""


class ForeignDatabase(DatabaseProblem):
    """The database holds something that is not ours; it was not touched."""


class EmptyFile(ForeignDatabase):
    """The file of the database has nothing in it, not even tables: it was cut short, or made so."""


class CutOff(DatabaseProblem):
    """A write was cut off in the middle; the next program that may write takes it back."""

    def __init__(self) -> None:
        super().__init__("a write was cut off, and what it left has to be taken back first")


class NewerDatabase(DatabaseProblem):
    """The database was written by a newer version of the program; it was not touched."""

    def __init__(self, found: str, known: str) -> None:
        super().__init__(f"the database has version {found}, this program knows up to {known}")
        self.found = found
        self.known = known
