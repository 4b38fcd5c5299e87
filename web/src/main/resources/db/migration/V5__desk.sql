-- What the desk says of a job, worked out from one version of it and from the prices as they then were; whenever either is another, it is
-- worked out again. job.stage is where the job stands by what is written in it.
create table desk_card (
    job          text   not null primary key references job (id),
    version      bigint not null,
    book         text   not null,
    book_version bigint not null,
    yard_version bigint not null,
    customer     text   not null,
    place        text   not null,
    cents        bigint,
    severity     text   not null,
    verdict      text   not null,
    next         text   not null,
    price_holds  text   not null,
    dig_from     text   not null,
    dig_through  text   not null,
    words        text   not null
);
create index customer_link_by_job on customer_link (job);
