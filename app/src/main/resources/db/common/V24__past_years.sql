-- What a field grew in the years before its season; yield is dry grain of corn, nitrogen is from all sources.
create table past_year (
    seq            integer     primary key,
    field          text        not null,
    zone           text        not null,
    year_          integer     not null,
    crop           varchar(20) not null,
    yield_kg_ha    double precision,
    nitrogen_kg_ha double precision,
    unique (field, zone, year_)
);
