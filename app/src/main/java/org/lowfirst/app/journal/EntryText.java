package org.lowfirst.app.journal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Origin;

/** The canonical text of an entry, what is hashed and what is exported. */
final class EntryText {

    /** What the first entry has for the hash of the one before. */
    static final String NO_HASH = "0".repeat(64);

    private EntryText() {}

    /** A fact made ready to store: kind, version and payload of today, and the hash over it all. */
    static StoredEntry seal(Entry entry, String previous) {
        FactCodec<?> codec = FactCodecs.getCodec(entry.fact());
        String payload = CanonicalJson.write(codec.encode(entry.fact()).members());
        StoredEntry unsealed = new StoredEntry(entry, codec.kind(), codec.version(), payload, previous, NO_HASH);
        return new StoredEntry(entry, codec.kind(), codec.version(), payload, previous, hash(unsealed));
    }

    /** The hash the entry should have. */
    static String hash(StoredEntry stored) {
        byte[] bytes = line(stored, false).getBytes(StandardCharsets.UTF_8);
        return HexFormat.of().formatHex(sha256().digest(bytes));
    }

    /** Members in canonical order; the payload is canonical already. */
    static String line(StoredEntry stored, boolean withHash) {
        Entry entry = stored.entry();
        Origin origin = entry.origin();
        StringBuilder out = new StringBuilder(stored.payload().length() + 400);
        member(out.append('{'), "author", origin.author());
        member(out.append(','), "bench", entry.bench().value());
        member(out.append(','), "effectiveAt", TimeText.write(origin.effectiveAt()));
        if (withHash) {
            member(out.append(','), "hash", stored.hash());
        }
        member(out.append(','), "key", origin.key().value());
        member(out.append(','), "kind", stored.kind());
        out.append(",\"payload\":").append(stored.payload());
        member(out.append(','), "previous", stored.previous());
        member(out.append(','), "recordedAt", TimeText.write(origin.recordedAt()));
        out.append(",\"seq\":").append(entry.seq());
        out.append(",\"version\":").append(stored.version());
        return out.append('}').toString();
    }

    private static void member(StringBuilder out, String name, String value) {
        out.append('"').append(name).append("\":");
        CanonicalJson.writeString(value, out);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256.", e);
        }
    }
}
