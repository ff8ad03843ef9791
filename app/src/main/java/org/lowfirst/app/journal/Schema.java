package org.lowfirst.app.journal;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.jspecify.annotations.Nullable;

/** Brings a database file to the tables of this version, or says why not. */
final class Schema {

    /** Number of the newest migration. */
    static final int VERSION = 2;

    /** Marks a file as ours: "LowF" in ASCII (SQLite's application_id). */
    static final int APPLICATION_ID = 0x4C6F7746;

    private static final String HISTORY = "flyway_schema_history";

    private Schema() {}

    /** @return what is wrong, null when the tables are there and current */
    static @Nullable Trouble prepare(DataSource source, Path file) throws SQLException {
        int found;
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement()) {
            int id = number(statement, "PRAGMA application_id");
            boolean empty = number(statement, "SELECT count(*) FROM sqlite_master") == 0;
            if (id != APPLICATION_ID && !empty) {
                return new Trouble.NotAJournal(file);
            }
            if (empty) {
                statement.execute("PRAGMA application_id = " + APPLICATION_ID);
            }
            found = version(statement);
        }
        if (found > VERSION) {
            return new Trouble.NewerVersion(file, "tables " + found, "tables " + VERSION);
        }
        if (found < VERSION) {
            migrate(source);
        }
        return null;
    }

    private static int version(Statement statement) throws SQLException {
        String tables = "SELECT count(*) FROM sqlite_master WHERE type = 'table' AND name = '" + HISTORY + "'";
        if (number(statement, tables) == 0) {
            return 0;
        }
        return number(
                statement, "SELECT coalesce(max(CAST(version AS INTEGER)), 0) FROM " + HISTORY + " WHERE success = 1");
    }

    private static void migrate(DataSource source) {
        Flyway.configure(Schema.class.getClassLoader())
                .loggers("slf4j")
                .dataSource(source)
                .locations("classpath:org/lowfirst/app/journal/tables", "classpath:org/lowfirst/app/journal/sqlite")
                .load()
                .migrate();
    }

    private static int number(Statement statement, String query) throws SQLException {
        try (ResultSet rows = statement.executeQuery(query)) {
            return rows.next() ? rows.getInt(1) : 0;
        }
    }
}
