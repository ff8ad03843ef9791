-- The journal: one append-only table. Portable SQL; what differs by database is in the directory named after it.
CREATE TABLE bench (
    id   VARCHAR(64) NOT NULL PRIMARY KEY,
    demo SMALLINT    NOT NULL
);

CREATE TABLE entry (
    bench        VARCHAR(64)  NOT NULL REFERENCES bench (id),
    seq          BIGINT       NOT NULL,
    entry_key    VARCHAR(80)  NOT NULL,
    kind         VARCHAR(64)  NOT NULL,
    version      INTEGER      NOT NULL,
    recorded_at  BIGINT       NOT NULL, -- milliseconds since 1970-01-01T00:00Z
    effective_at BIGINT       NOT NULL, -- milliseconds since 1970-01-01T00:00Z
    author       VARCHAR(200) NOT NULL,
    payload      TEXT         NOT NULL, -- canonical JSON (RFC 8785)
    previous     CHAR(64)     NOT NULL,
    hash         CHAR(64)     NOT NULL,
    place_at     BIGINT       NOT NULL, -- order in which entries count, worked out from the above: by time ...
    place        BIGINT       NOT NULL, -- ... then by the number of the entry whose place it takes
    late         SMALLINT     NOT NULL, -- 1 when an entry that counts after it was there before it
    PRIMARY KEY (bench, seq),
    UNIQUE (bench, entry_key)
);

CREATE INDEX entry_by_place ON entry (bench, place_at, place);

CREATE INDEX entry_late ON entry (bench, late, place_at);
