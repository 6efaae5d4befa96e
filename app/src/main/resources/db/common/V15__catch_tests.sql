-- Catch tests as they were entered: "flows" are litres a minute, outlet by outlet, set apart by blanks.
create table catch_test (
    seq    integer          primary key,
    rig    text             not null,
    caught varchar(40)      not null,
    person text             not null,
    outlet text             not null,
    rated  double precision not null check (rated > 0),
    flows  text             not null
);
