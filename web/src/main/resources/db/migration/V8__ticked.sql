-- What a customer ticked when accepting, in words, with the total; empty where nothing was to tick.
alter table acceptance add column ticked text not null default '';
