-- Photographs that go with readings: stripped of what a camera writes beside the picture, and a small copy for lists.
create table photograph (
    id       varchar(40) primary key,
    reading  text        not null references reading (id),
    type_    varchar(20) not null,
    wide     integer     not null check (wide > 0),
    tall     integer     not null check (tall > 0),
    image    bytea       not null,
    small    bytea       not null
);
create index photograph_of_reading on photograph (reading);
