-- A film that no window can show is shown by a copy, which names it. History is brought into line with the records, which
-- are checked against it: no file so far was such a copy.

ALTER TABLE media ADD COLUMN proxy_of TEXT;
UPDATE change SET after = json_set(after, '$.proxyOf', json('null')) WHERE kind = 'media' AND op = 'create';
