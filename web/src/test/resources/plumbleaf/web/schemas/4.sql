-- What version 4 could hold. Its migration was released and is never changed again: fc961358e6709eaa63a195d8866c7ff9a0e9bac0be55669b0c639c78f3a07473
insert into yard_revision (number, content, why, who, changed_at) values (1, 'kind,item,length
bar,2x2x14ga,20 ft
', 'counted', 'Wen Hallow', 1140);
insert into receipt (job, supplier, item, came, who, changed_at) values ('kilnyardkilnyard', 'Steel yard', '2x2x14ga', 7, 'Cora Pike', 1150);
