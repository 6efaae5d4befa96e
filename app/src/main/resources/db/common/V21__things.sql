-- What fields, rigs and products are called today. In every other table stands the id of a thing: the name by which it was
-- first told of, or the id that a folder gave it. A thing that is still called by its id has no row here.
create table thing (
    kind  varchar(10) not null check (kind in ('field', 'rig', 'product')),
    id    text        not null,
    name  text        not null,
    given text        not null default '', -- the id that a folder gives it, where it is another
    primary key (kind, id),
    unique (kind, name)
);
