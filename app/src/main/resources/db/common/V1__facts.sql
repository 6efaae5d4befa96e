-- The facts of one farm. Amounts are in the unit that the column's name ends with; an unknown amount is null.
-- Dates and times are ISO 8601 text; "seq" keeps the order in which facts were given.
-- The same statements run on SQLite and PostgreSQL.

create table state (
    name   varchar(40) primary key,
    amount integer     not null
);
insert into state (name, amount) values ('changes', 0);

create table farm (
    seq                 integer          primary key check (seq = 1),
    name                text             not null,
    latitude_deg        double precision not null check (latitude_deg between -90 and 90),
    longitude_deg       double precision not null check (longitude_deg between -180 and 180),
    elevation_m         double precision not null,
    time_zone           text             not null,
    corn_usd_bu         double precision not null,
    harvest_cost_usd_bu double precision not null,
    nitrogen_usd_kg     double precision not null
);

create table price (
    seq             integer          primary key,
    product         text             not null unique,
    nitrogen_usd_kg double precision not null
);

create table zone (
    seq                  integer          primary key,
    field                text             not null,
    zone                 text             not null,
    area_ha              double precision not null check (area_ha > 0),
    crop                 text             not null,
    planted              varchar(10)      not null,
    relative_maturity_d  double precision,
    population_m2        double precision,
    row_spacing_m        double precision,
    previous_crop        varchar(20)      not null,
    drainage             varchar(20)      not null,
    tillage              varchar(20)      not null,
    residue_cover        double precision,
    curve_number         double precision,
    hybrid               text             not null,
    gdd_silk             double precision,
    gdd_black_layer      double precision,
    yield_goal_kg_ha     double precision,
    texture              text             not null,
    unique (field, zone)
);

create table soil_layer (
    seq                integer          primary key,
    field              text             not null,
    zone               text             not null,
    layer              integer          not null,
    wilting_point      double precision not null,
    field_capacity     double precision not null,
    saturation         double precision not null,
    conductivity_mm_h  double precision not null,
    bulk_density_g_cm3 double precision not null,
    om_pct             double precision not null,
    ph                 double precision not null,
    cec_cmol_kg        double precision not null,
    unique (field, zone, layer),
    foreign key (field, zone) references zone (field, zone) on delete cascade
);

create table boundary (
    seq   integer primary key,
    field text    not null,
    zone  text    not null,
    shape text    not null -- well-known binary in hexadecimal, longitude before latitude
);

-- As written, holes and all; they are filled when the farm is read, so that what was filled never stands before
-- what was observed.
create table weather_day (
    seq          integer          primary key,
    date_        varchar(10)      not null unique,
    tmax_c       double precision,
    tmin_c       double precision,
    rain_mm      double precision,
    solar_mj_m2  double precision,
    wind_m_s     double precision,
    rh_max_pct   double precision,
    rh_min_pct   double precision,
    dew_point_c  double precision
);

create table forecast_day (
    seq          integer          primary key,
    date_        varchar(10)      not null unique,
    tmax_c       double precision not null,
    tmin_c       double precision not null,
    rain_mm      double precision not null check (rain_mm >= 0),
    solar_mj_m2  double precision,
    wind_m_s     double precision,
    rh_max_pct   double precision,
    rh_min_pct   double precision,
    dew_point_c  double precision,
    rain_chance  double precision
);

create table weather_hour (
    seq           integer     primary key,
    at            varchar(20) not null,
    air_c         double precision,
    rh_pct        double precision,
    wind_m_s      double precision,
    gust_m_s      double precision,
    wind_from_deg double precision,
    rain_mm       double precision,
    rain_chance   double precision,
    cloud         double precision
);

create table pass (
    seq            integer          primary key,
    id             text             not null unique,
    field          text             not null,
    zone           text             not null,
    date_          varchar(10)      not null,
    product        text             not null,
    rate           double precision not null,
    rate_unit      text             not null,
    nitrogen_kg_ha double precision not null,
    placement      varchar(30)      not null,
    inhibitor      varchar(20)      not null,
    state          varchar(10)      not null
        check (state in ('proposed', 'planned', 'loaded', 'made', 'dropped'))
);
create index pass_of_field on pass (field, date_);

create table reading (
    seq       integer          primary key,
    id        text             not null unique,
    field     text             not null,
    zone      text             not null,
    date_     varchar(10)      not null,
    kind      varchar(20)      not null,
    amount    double precision not null,
    entered   text             not null,
    top_mm    double precision,
    bottom_mm double precision,
    position_ varchar(10)      not null,
    note      text             not null
);
create index reading_of_field on reading (field, date_);

create table irrigation (
    seq      integer          primary key,
    field    text             not null,
    zone     text             not null,
    date_    varchar(10)      not null,
    depth_mm double precision not null
);

create table manure (
    seq               integer          primary key,
    field             text             not null,
    zone              text             not null,
    date_             varchar(10)      not null,
    organic_n_kg_ha   double precision not null,
    ammonium_n_kg_ha  double precision not null,
    placement         varchar(30)      not null
);

create table nitrogen_product (
    seq            integer          primary key,
    name           text             not null,
    nitrogen       double precision not null,
    density_kg_l   double precision,
    urea_share     double precision not null,
    ammonium_share double precision not null,
    nitrate_share  double precision not null,
    source         text             not null
);

create table product (
    seq              integer primary key,
    name             text    not null,
    form             text    not null,
    density_kg_l     double precision,
    price            double precision,
    price_unit       text    not null,
    registration     text    not null,
    caution          text    not null,
    n_name           text,
    n_nitrogen       double precision,
    n_density_kg_l   double precision,
    n_urea_share     double precision,
    n_ammonium_share double precision,
    n_nitrate_share  double precision,
    n_source         text
);

create table rig (
    seq              integer primary key,
    name             text    not null,
    kind             text    not null,
    clearance_m      double precision,
    width_m          double precision,
    tank_m3          double precision,
    speed_min_m_s    double precision,
    speed_max_m_s    double precision,
    pressure_min_pa  double precision,
    pressure_max_pa  double precision,
    outlets_per_row  integer not null,
    placements       text    not null,
    cost_usd_ha      double precision,
    heel_m3          double precision,
    prime_m3         double precision,
    field_efficiency double precision
);

create table recipe (
    seq          integer primary key,
    name         text    not null,
    carrier_l_ha double precision
);

create table recipe_line (
    seq       integer          primary key,
    recipe    text             not null,
    line      integer          not null,
    product   text             not null,
    rate      double precision not null,
    rate_unit text             not null
);

create table stock (
    seq       integer          primary key,
    product   text             not null,
    amount    double precision not null,
    unit      text             not null,
    amount_l  double precision,
    amount_kg double precision,
    lot       text             not null,
    place     text             not null
);

create table remark (
    seq   integer     primary key,
    about varchar(10) not null check (about in ('farm', 'forecast')),
    place text        not null,
    what  text        not null
);
