-- What a thing was called before, besides by its id: a folder, a paper or a correction may still say so.
create table former_name (
    kind varchar(10) not null,
    name text        not null,
    id   text        not null,
    primary key (kind, name),
    foreign key (kind, id) references thing (kind, id)
);
