-- What version 2 could hold. Its migration was released and is never changed again: c43f2243b634bca4f76f1b6bb27fc578df17bdf48c79c7554d0fd0136fc9efd2
insert into person (id, sign_in, name, role, secret, made_at, closed_at) values ('cora1', 'cora', 'Cora Pike', 'crew', 'PASSWORD', 850, 1250);
insert into setting (name, value) values ('house', 'Hallow and Pike');
insert into invitation (token, person, expires_at, used_at) values ('HASH-OF-INVITATION', 'cora1', 5000, 860);
insert into api_token (id, token, person, label, made_at, revoked_at) values ('key1', 'HASH-OF-KEY', 'wen1', 'the office computer', 870, null);
insert into audit (id, made_at, who, what, about) values ('line1', 880, 'Wen Hallow', 'added a person', 'Cora Pike');
insert into attachment (id, job, part, name, kind, size, digest, who, made_at, trashed_at, content) values ('file1file1file1f', 'kilnyardkilnyard', 'G1', 'a note.txt', 'text/plain', 5, '2cf24dba5fb0a30e26e83b2ac5b9e29e1b161e5c1fa7425e73043362938b9824', 'Cora Pike', 1100, null, BYTES:68656c6c6f);
insert into customer_link (id, token, job, revision, papers, who, made_at, expires_at, revoked_at) values ('link1', 'HASH-OF-LINK', 'kilnyardkilnyard', 1, 'proposal.pdf/site-plan.pdf', 'Wen Hallow', 1110, 4000000000000, null);
insert into acceptance (link, name, said_on, made_at) values ('link1', 'Odalys Venn', '2027-04-19', 1120);
