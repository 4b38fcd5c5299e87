-- The house's own builds: how a gate or a run is made, under a name, without where it stands.
create table house_build (
    kind text not null,
    name text not null,
    content text not null,
    who text not null,
    changed_at bigint not null,
    primary key (kind, name)
);
