package org.lowfirst.app.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.statement.StatementContext;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Entry;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Fact;
import org.lowfirst.station.Origin;

/** Rows of the table as entries. */
final class Rows {

    static final String COLUMNS =
            "bench, seq, entry_key, kind, version, recorded_at, effective_at, author, payload," + " previous, hash";

    static final RowMapper<StoredEntry> STORED = Rows::stored;

    private Rows() {}

    private static StoredEntry stored(ResultSet row, StatementContext context) throws SQLException {
        String kind = row.getString(4);
        int version = row.getInt(5);
        String payload = row.getString(9);
        Fact fact = FactCodecs.decode(kind, version, JsonText.parseObject(payload));
        Origin origin = new Origin(
                new EntryKey(row.getString(3)),
                Instant.ofEpochMilli(row.getLong(6)),
                Instant.ofEpochMilli(row.getLong(7)),
                row.getString(8));
        Entry entry = new Entry(new BenchId(row.getString(1)), row.getLong(2), origin, fact);
        return new StoredEntry(entry, kind, version, payload, row.getString(10), row.getString(11));
    }
}
