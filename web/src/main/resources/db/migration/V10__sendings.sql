-- The name under which a device sent a change: one whose answer was lost is sent again under the same name, and is known to have come.
alter table move add column sending text;
create unique index move_sending on move (job, sending);
