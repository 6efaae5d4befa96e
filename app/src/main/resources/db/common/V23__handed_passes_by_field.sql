-- Which field a pass of a handed plan goes to, so that the plan still holds when the field is called otherwise. Plans of
-- before have it in "pass" alone, as it was read.
alter table handed_pass add column field text not null default '';
alter table handed_pass add column zone text not null default '';
alter table handed_pass add column work text not null default '';
