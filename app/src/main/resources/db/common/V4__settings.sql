-- What a farm sets for its decisions, in the inside unit of the setting; what is not here is as usual.

create table setting (
    seq    integer          primary key,
    name   varchar(40)      not null unique,
    amount double precision not null
);
