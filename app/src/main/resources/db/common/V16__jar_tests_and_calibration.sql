-- What a jar test showed and with which water; nozzles and plates changed on a rig; the weight of what was caught (kg/L);
-- what is dissolved in the farm's water, as on the test's sheet.
alter table mix_note add column outcome varchar(8) not null default 'passed';
alter table mix_note add column water text not null default '';
alter table catch_test add column density double precision not null default 1;

create table outlet_change (
    seq    integer     primary key,
    rig    text        not null,
    at     varchar(40) not null,
    person text        not null,
    said   text        not null
);

create table water_test (
    seq    integer     primary key,
    at     varchar(40) not null,
    person text        not null,
    source text        not null,
    said   text        not null
);
