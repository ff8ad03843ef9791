package org.lowfirst.app.flight;

import java.util.List;
import java.util.Locale;
import org.lowfirst.app.file.Asked;
import org.lowfirst.planning.flight.Altitude;
import org.lowfirst.planning.flight.Flow;
import org.lowfirst.planning.flight.Occupant;
import org.lowfirst.planning.flight.OxygenRules;

/** Reads the track of a flight from a recorder's file (IGC) or a table (CSV). */
public final class ReadingATrack {

    /** Above every airfield people fly from; the use below it is small. */
    private static final Altitude DEVICE_ON = Altitude.ofFeet(8_000);

    private ReadingATrack() {}

    /**
     * Reads a track.
     *
     * @param name as it was sent; ends in .igc or .csv
     * @param bytes its content
     * @param language in which problems and notes are said
     */
    public static Asked<FlownTrack> read(String name, byte[] bytes, Locale language) {
        TrackFile file =
                TrackFile.read(name, bytes, name.toLowerCase(Locale.ROOT).endsWith(".igc"), language);
        if (file.track().isEmpty()) {
            return new Asked.Refused<>(file.source(), file.problems().inOrder());
        }
        Track track = file.track().get();
        List<Occupant> anybody = List.of(
                new Occupant("", Occupant.Role.CREW, new Flow.ByAltitude(1.0), DEVICE_ON),
                new Occupant("-", Occupant.Role.PASSENGER, new Flow.ByAltitude(1.0), DEVICE_ON));
        List<Fix> kept = new Thinning(anybody, OxygenRules.all()).thin(track.fixes());
        double start_s = kept.get(0).seconds();
        return new Asked.Answered<>(
                file.source(),
                new FlownTrack(
                        kept.stream()
                                .map(fix -> new FlownTrack.Point(fix.seconds() - start_s, fix.metres()))
                                .toList(),
                        track.fixes().size(),
                        track.notes()),
                file.problems().inOrder());
    }
}
