-- Plans of the week as they were handed to the drivers: which rig makes which pass on which day, in order.
create table handed_plan (
    seq    integer     primary key,
    handed varchar(40) not null
);

create table handed_pass (
    plan  integer     not null references handed_plan (seq),
    place integer     not null,
    pass  text        not null,
    rig   text        not null,
    day   varchar(10) not null,
    primary key (plan, place)
);
