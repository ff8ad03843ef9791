package org.lowfirst.app.table;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * The text of a file as spreadsheets write them: UTF-16 when a byte order mark says so, else UTF-8, and what is not UTF-8 in the
 * encoding that spreadsheets on Windows use in the West.
 */
public final class SentText {

    private static final Charset WINDOWS = Charset.forName("windows-1252");

    private SentText() {}

    public static String of(byte[] file) {
        if (marked(file, 0xFE, 0xFF)) {
            return new String(file, 2, file.length - 2, StandardCharsets.UTF_16BE);
        }
        if (marked(file, 0xFF, 0xFE)) {
            return new String(file, 2, file.length - 2, StandardCharsets.UTF_16LE);
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(file))
                    .toString();
        } catch (CharacterCodingException notUtf8) {
            return new String(file, WINDOWS);
        }
    }

    private static boolean marked(byte[] file, int first, int second) {
        return file.length >= 2 && (file[0] & 0xFF) == first && (file[1] & 0xFF) == second;
    }
}
