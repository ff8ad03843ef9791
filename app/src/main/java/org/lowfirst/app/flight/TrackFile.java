package org.lowfirst.app.flight;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.lowfirst.app.file.FileBytes;
import org.lowfirst.app.file.FileText;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.SourceText;

/**
 * The track file that a flight file names.
 *
 * @param source its text; empty when it could not be opened
 * @param track what it holds; empty when it cannot be used
 * @param problems what is wrong inside it
 */
record TrackFile(SourceText source, Optional<Track> track, Problems problems) {

    /** Either the file or why there is none, as the rest of a sentence. */
    record Opened(Optional<TrackFile> file, String why) {}

    /**
     * Opens and reads a track.
     *
     * @param name as the flight file has it
     * @param folder folder of the flight file
     */
    static Opened open(String name, Path folder) {
        String lower = name.toLowerCase(Locale.ROOT);
        if (!lower.endsWith(".igc") && !lower.endsWith(".csv")) {
            return missing("The track (" + name + ") must be a flight recorder's file (.igc) or a table (.csv).");
        }
        String path;
        try {
            path = folder.resolve(name).toString();
        } catch (InvalidPathException odd) {
            return missing("The track (" + name + ") is not a file name (" + odd.getReason() + ").");
        }
        FileBytes read = FileBytes.of(path, InputStream.nullInputStream(), FlightLimits.MOST_TRACK_BYTES);
        if (read instanceof FileBytes.Missing missing) {
            return missing("The track cannot be opened: " + missing.why().replace(": error:", ":"));
        }
        FileBytes.Found found = (FileBytes.Found) read;
        return new Opened(Optional.of(read(found.name(), found.bytes(), lower.endsWith(".igc"), Locale.ENGLISH)), "");
    }

    /**
     * @param igc whether it is a flight recorder's file, else a table
     * @param language in which problems and notes are said
     */
    static TrackFile read(String name, byte[] bytes, boolean igc, Locale language) {
        Problems problems = new Problems(language);
        // A recorder's file is ASCII; names in its head are sometimes written otherwise, and do not matter.
        Optional<String> text = igc && bytes.length <= FlightLimits.MOST_TRACK_BYTES
                ? Optional.of(new String(bytes, StandardCharsets.ISO_8859_1))
                : FileText.decode(
                        bytes, FlightLimits.MOST_TRACK_BYTES, problems.say("track.shape", Map.of()), problems);
        SourceText source = new SourceText(name, text.orElse(""));
        Optional<Track> track = text.isEmpty()
                ? Optional.empty()
                : igc ? IgcTrack.read(source, problems) : CsvTrack.read(source, problems);
        return new TrackFile(source, track, problems);
    }

    FileProblems fileProblems() {
        return new FileProblems(source, List.copyOf(problems.inOrder()));
    }

    private static Opened missing(String why) {
        return new Opened(Optional.empty(), why);
    }
}
