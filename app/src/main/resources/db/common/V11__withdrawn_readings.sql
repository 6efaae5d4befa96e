-- Readings taken back. The reading stays, and so does what it said then: when a later import says otherwise, it counts again.
create table withdrawn_reading (
    reading  text        not null references reading (id),
    entered  text        not null,
    on_      varchar(10) not null,
    primary key (reading, entered)
);
