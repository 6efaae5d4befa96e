-- The last morning page as it was shown, one for each system of units: shown again, with its time, while a new one is worked
-- out. No fact is ever read from it.
create table kept_brief (
    metric  integer     primary key,
    day     varchar(10) not null,
    made    varchar(40) not null,
    program text        not null,
    page    text        not null
);
