-- What the loads of a job are of, and where it goes on: the loads of one job share both, a part handed over too.
create table load_job (
    job       text primary key,
    recipe    text not null,
    placement text not null
);
