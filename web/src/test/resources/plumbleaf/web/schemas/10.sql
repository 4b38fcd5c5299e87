-- What version 10 could hold. Its migration was released and is never changed again: 0db719a34974ac75dc5e73a4e1df809079caa316342d2cbff1ca5444e120f097
update move set sending = 'mh3k2p-4f6g7h8j' where version = 1;
