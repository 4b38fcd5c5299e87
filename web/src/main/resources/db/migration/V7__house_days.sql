-- Who and what the house works with, and when not: its file as it was after every change.
create table house_days_revision (
    number     bigint not null primary key,
    content    text   not null,
    why        text   not null,
    who        text   not null,
    changed_at bigint not null
);
