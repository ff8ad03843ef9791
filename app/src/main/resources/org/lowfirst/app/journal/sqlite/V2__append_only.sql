-- Entries are never changed and never deleted; only the demo bench can go, with its whole journal.
CREATE TRIGGER entry_is_never_changed BEFORE UPDATE ON entry
BEGIN
    SELECT RAISE(ABORT, 'entries are never changed');
END;

CREATE TRIGGER entry_is_never_deleted BEFORE DELETE ON entry
WHEN (SELECT demo FROM bench WHERE id = OLD.bench) = 0
BEGIN
    SELECT RAISE(ABORT, 'entries are never deleted');
END;

CREATE TRIGGER bench_is_never_changed BEFORE UPDATE ON bench
BEGIN
    SELECT RAISE(ABORT, 'benches are never changed');
END;

CREATE TRIGGER bench_is_never_deleted BEFORE DELETE ON bench
WHEN OLD.demo = 0
BEGIN
    SELECT RAISE(ABORT, 'benches are never deleted');
END;
