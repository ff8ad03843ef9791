package org.lowfirst.app.file;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Turns the bytes of a file into text, or says why they are none. */
public final class FileText {

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private FileText() {}

    /**
     * The text of UTF-8 bytes, without a byte order mark; empty when there is none, and then a problem says why.
     *
     * @param most bytes a file may have
     * @param shape what such a file looks like, for somebody whose file is larger: the rest of a sentence
     */
    public static Optional<String> decode(byte[] bytes, int most, String shape, Problems problems) {
        if (bytes.length > most) {
            problems.fileError(problems.say(
                    "text.too-long", Map.of("most", String.format(problems.language(), "%,d", most), "shape", shape)));
            return Optional.empty();
        }
        if (startsAsUtf16(bytes)) {
            problems.fileError(problems.say("text.utf16", Map.of()));
            return Optional.empty();
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            problems.error(endOf(text), notUtf8(bytes[in.position()], problems));
            return Optional.empty();
        }
        return Optional.of(!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text);
    }

    private static boolean startsAsUtf16(byte[] bytes) {
        return bytes.length >= 2
                && ((bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF)
                        || (bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE));
    }

    private static String notUtf8(byte wrong, Problems problems) {
        return problems.say("text.not-utf8", Map.of("byte", String.format(Locale.ROOT, "%02X", wrong & 0xFF)));
    }

    static Place endOf(String text) {
        SourceText soFar = new SourceText("", text);
        int line = soFar.lines().size();
        String last = soFar.line(line);
        return new Place(line, last.codePointCount(0, last.length()) + 1, 1);
    }
}
