-- What every row held when it was written, as a sum over its values: SQLite sees damage to its own order, not to a value.
-- "unsealed" are the rows that the transaction under way has written so far.
create table seal (
    table_ text    not null,
    row_   integer not null,
    sum    integer not null,
    primary key (table_, row_)
) without rowid;

create table unsealed (
    table_ text    not null,
    row_   integer not null,
    primary key (table_, row_)
) without rowid;
