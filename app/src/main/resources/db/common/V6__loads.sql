-- Label entries with their second look, loads with every version, what loads draw from lots, and notes that let a tank
-- be filled. "body" is the whole as JSON; columns beside it are for finding it.

create table label_entry (
    seq     integer primary key,
    product text    not null,
    crop    text    not null,
    body    text    not null
);

create table tank_load (
    id      text        primary key,
    seq     integer     not null unique,
    version integer     not null check (version > 0),
    state   varchar(10) not null check (state in ('planned', 'reserved', 'mixing', 'mixed', 'applied', 'cancelled')),
    rig     text        not null,
    filed   integer references application_record (number),
    body    text        not null
);
create index tank_load_of_rig on tank_load (rig, state);

-- Every version stays, so that two people who changed one load see both.
create table tank_load_version (
    load    text    not null references tank_load (id),
    version integer not null,
    body    text    not null,
    primary key (load, version)
);

create table load_ground (
    load  text not null references tank_load (id),
    field text not null,
    zone  text not null,
    primary key (load, field, zone)
);
create index load_ground_of_field on load_ground (field);

create table lot_draw (
    load    text             not null references tank_load (id),
    product text             not null,
    lot     text             not null,
    amount  double precision not null check (amount > 0),
    is_mass integer          not null,
    settled integer          not null default 0
);
create index lot_draw_of_product on lot_draw (product, lot);

create table mix_note (
    seq    integer     primary key,
    kind   varchar(8)  not null check (kind in ('clean', 'jar')),
    about  text        not null,
    at     varchar(40) not null,
    person text        not null,
    said   text        not null
);
