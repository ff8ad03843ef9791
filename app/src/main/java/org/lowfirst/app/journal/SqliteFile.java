package org.lowfirst.app.journal;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import org.flywaydb.core.api.FlywayException;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** Opens the embedded database: write-ahead log, full synchronous commits, foreign keys. */
final class SqliteFile {

    private static final int CONNECTIONS = 4;

    private SqliteFile() {}

    /**
     * @param file the database file; made when it is missing, with its directory
     * @param patience how long to wait for another process
     */
    static Opening open(Path file, Duration patience) {
        try {
            Path directory = file.toAbsolutePath().getParent();
            if (directory != null) {
                Files.createDirectories(directory);
            }
        } catch (IOException e) {
            return new Opening.CannotOpen(new Trouble.ReadOnly(file));
        }
        if (Files.exists(file) && !Files.isWritable(file)) {
            return new Opening.CannotOpen(new Trouble.ReadOnly(file));
        }
        if (Files.isDirectory(file)) {
            return new Opening.CannotOpen(new Trouble.NotAJournal(file));
        }
        return openFile(file, config(patience));
    }

    private static SQLiteConfig config(Duration patience) {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setBusyTimeout((int) patience.toMillis());
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        return config;
    }

    private static Opening openFile(Path file, SQLiteConfig config) {
        SQLiteDataSource plain = new SQLiteDataSource(config);
        plain.setUrl("jdbc:sqlite:" + file);
        try {
            @Nullable Trouble trouble = Schema.prepare(plain, file);
            if (trouble != null) {
                return new Opening.CannotOpen(trouble);
            }
        } catch (SQLException | FlywayException e) {
            return new Opening.CannotOpen(Troubles.of(file, e));
        }
        HikariConfig pool = new HikariConfig();
        pool.setDataSource(plain);
        pool.setPoolName("journal");
        pool.setMaximumPoolSize(CONNECTIONS);
        pool.setMinimumIdle(1);
        pool.setInitializationFailTimeout(-1);
        return new Opening.Opened(new Journal(file, new HikariDataSource(pool)));
    }
}
