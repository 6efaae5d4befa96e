-- Filed records, each bound to the one before it. "entry" is the canonical text that was hashed; nothing beside it
-- says anything that is not in it, except the number, which must be its place.
create table application_record (
    number   integer     primary key check (number > 0),
    id       text        not null unique,
    pass     text        not null references pass (id),
    entry    text        not null,
    previous varchar(64) not null unique,
    hash     varchar(64) not null unique
);
