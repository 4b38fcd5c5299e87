-- The yard: its file as it was after every change, so that nothing counted is lost; and what came of what a job ordered.
create table yard_revision (
    number     bigint not null primary key,
    content    text   not null,
    why        text   not null,
    who        text   not null,
    changed_at bigint not null
);

create table receipt (
    job        text   not null,
    supplier   text   not null,
    item       text   not null,
    came       bigint not null,
    who        text   not null,
    changed_at bigint not null,
    primary key (job, supplier, item)
);
