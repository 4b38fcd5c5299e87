-- Jobs are documents with revisions; a revision is never changed. A move says which revision a job stood on after each change, so undo
-- and redo are moves too and nothing is ever lost. Times are milliseconds since 1970, UTC. The same SQL serves SQLite and PostgreSQL.
create table job (
    id         text   not null primary key,
    title      text   not null,
    stage      text   not null,
    version    bigint not null,
    revision   bigint not null,
    changed_at bigint not null,
    trashed_at bigint
);

create table revision (
    job      text   not null references job (id),
    number   bigint not null,
    parent   bigint not null,
    document text   not null,
    what     text   not null,
    who      text   not null,
    made_at  bigint not null,
    primary key (job, number)
);

create table move (
    job      text   not null references job (id),
    version  bigint not null,
    revision bigint not null,
    kind     text   not null,
    who      text   not null,
    made_at  bigint not null,
    primary key (job, version)
);

create table person (
    id       text   not null primary key,
    sign_in  text   not null unique,
    name     text   not null,
    role     text   not null,
    secret   text   not null,
    made_at  bigint not null
);
