package org.lowfirst.app.journal;

import java.nio.file.Path;
import java.sql.SQLException;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Tells what is wrong from what the database said. */
final class Troubles {

    private Troubles() {}

    static Trouble of(Path file, Throwable thrown) {
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            Trouble trouble = known(file, cause);
            if (trouble != null) {
                return trouble;
            }
        }
        return new Trouble.Damaged(file, String.valueOf(thrown.getMessage()));
    }

    private static @Nullable Trouble known(Path file, Throwable cause) {
        if (cause instanceof NewerEntry newer) {
            return new Trouble.NewerVersion(file, newer.found(), newer.known());
        } else if (cause instanceof JsonFault fault) {
            return new Trouble.Damaged(file, String.valueOf(fault.getMessage()));
        } else if (cause instanceof SQLiteException e) {
            return ofCode(file, e.getResultCode(), e);
        }
        return null;
    }

    private static Trouble ofCode(Path file, SQLiteErrorCode code, SQLException e) {
        String name = code.name();
        if (name.startsWith("SQLITE_READONLY") || name.startsWith("SQLITE_CANTOPEN") || name.equals("SQLITE_PERM")) {
            return new Trouble.ReadOnly(file);
        } else if (name.startsWith("SQLITE_BUSY") || name.startsWith("SQLITE_LOCKED")) {
            return new Trouble.Locked(file);
        } else if (name.equals("SQLITE_NOTADB")) {
            return new Trouble.NotAJournal(file);
        } else if (name.equals("SQLITE_FULL")) {
            return new Trouble.DiskFull(file);
        }
        return new Trouble.Damaged(file, String.valueOf(e.getMessage()));
    }
}
