"""Whether a label names trace elements without figures."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the column; of the products on record it is not known."""
    op.add_column("product", sa.Column("trace_elements", sa.Boolean()))


def downgrade() -> None:
    """Drop the column."""
    op.drop_column("product", "trace_elements")
