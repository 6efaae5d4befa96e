-- What makes disease likelier in a zone; what the label of a product says; how tall a crop a rig may spray in.
-- A limit of a label that is null was not entered, unless label_states_none names it.

alter table zone add column disease_rating double precision;
alter table zone add column disease_ratings text not null default '';
alter table zone add column disease_history text not null default '';
alter table zone add column wet_place varchar(3) not null default 'no';

alter table product add column kind varchar(20) not null default 'other';
alter table product add column mode_groups text not null default '';
alter table product add column label_wind_min_m_s double precision;
alter table product add column label_wind_max_m_s double precision;
alter table product add column label_air_max_c double precision;
alter table product add column label_rainfast_h double precision;
alter table product add column label_inversion_ban varchar(3) not null default '';
alter table product add column label_droplet_min double precision;
alter table product add column label_pre_harvest_d double precision;
alter table product add column label_stage_first double precision;
alter table product add column label_stage_last double precision;
alter table product add column label_states_none text not null default '';

alter table rig add column spray_clearance_m double precision;
