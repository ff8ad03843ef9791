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

    /** What an entry is made of, without the chain. */
    static final String ENTRY_COLUMNS =
            "bench, seq, entry_key, kind, version, recorded_at, effective_at, author, payload";

    static final String COLUMNS = ENTRY_COLUMNS + ", previous, hash";

    static final RowMapper<Entry> ENTRY = Rows::entry;

    static final RowMapper<StoredEntry> STORED = Rows::stored;

    private Rows() {}

    private static Entry entry(ResultSet row, StatementContext context) throws SQLException {
        Fact fact = FactCodecs.decode(row.getString(4), row.getInt(5), JsonText.parseObject(row.getString(9)));
        Origin origin = new Origin(
                new EntryKey(row.getString(3)),
                Instant.ofEpochMilli(row.getLong(6)),
                Instant.ofEpochMilli(row.getLong(7)),
                row.getString(8));
        return new Entry(new BenchId(row.getString(1)), row.getLong(2), origin, fact);
    }

    private static StoredEntry stored(ResultSet row, StatementContext context) throws SQLException {
        return new StoredEntry(
                entry(row, context),
                row.getString(4),
                row.getInt(5),
                row.getString(9),
                row.getString(10),
                row.getString(11));
    }
}
