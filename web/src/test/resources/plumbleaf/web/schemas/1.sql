-- What version 1 could hold. Its migration was released and is never changed again: a40a1011814a52d2e7eeaa2e3ea4db35636f82d20d014d9c841be5f925302270
insert into job (id, title, stage, version, revision, changed_at, trashed_at) values ('kilnyardkilnyard', 'Kiln yard ✓ "north"', 'priced', 3, 1, 1200, null);
insert into job (id, title, stage, version, revision, changed_at, trashed_at) values ('oldyardoldyardol', 'Old yard', 'priced', 1, 1, 1000, 1300);
insert into revision (job, number, parent, document, what, who, made_at) values ('kilnyardkilnyard', 1, 0, '{"a":1}', 'started the job', 'Wen Hallow', 900);
insert into revision (job, number, parent, document, what, who, made_at) values ('kilnyardkilnyard', 2, 1, '{"a":2}', 'a 1 → 2', 'Wen Hallow', 1000);
insert into revision (job, number, parent, document, what, who, made_at) values ('oldyardoldyardol', 1, 0, '{"b":1}', 'started the job', 'Wen Hallow', 1000);
insert into move (job, version, revision, kind, who, made_at) values ('kilnyardkilnyard', 1, 1, 'new', 'Wen Hallow', 900);
insert into move (job, version, revision, kind, who, made_at) values ('kilnyardkilnyard', 2, 2, 'edit', 'Wen Hallow', 1000);
insert into move (job, version, revision, kind, who, made_at) values ('kilnyardkilnyard', 3, 1, 'undo', 'Wen Hallow', 1200);
insert into move (job, version, revision, kind, who, made_at) values ('oldyardoldyardol', 1, 1, 'new', 'Wen Hallow', 1000);
insert into person (id, sign_in, name, role, secret, made_at) values ('wen1', 'wen', 'Wen Hallow', 'owner', 'PASSWORD', 800);
