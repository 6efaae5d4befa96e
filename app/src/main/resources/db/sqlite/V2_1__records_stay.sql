-- A filed record is never edited and never deleted; it is corrected by a further one.
create trigger record_is_never_edited before update on application_record
begin
    select raise(abort, 'a filed record is never edited; correct it by a further record');
end;

create trigger record_is_never_deleted before delete on application_record
begin
    select raise(abort, 'a filed record is never deleted');
end;

-- "insert or replace" would delete without firing the trigger above.
create trigger record_only_follows_the_last before insert on application_record
when new.number <> (select coalesce(max(number), 0) + 1 from application_record)
  or new.previous <> coalesce((select hash from application_record order by number desc limit 1),
                              '0000000000000000000000000000000000000000000000000000000000000000')
begin
    select raise(abort, 'a record can only follow the last one filed');
end;

create trigger pass_with_a_record_stays before delete on pass
when exists (select 1 from application_record where pass = old.id)
begin
    select raise(abort, 'a pass with a filed record stays');
end;
