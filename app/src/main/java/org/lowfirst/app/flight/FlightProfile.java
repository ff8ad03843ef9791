package org.lowfirst.app.flight;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lowfirst.app.file.ListReader;
import org.lowfirst.app.file.Place;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.Section;
import org.lowfirst.app.file.Tree.Scalar;
import org.lowfirst.app.sheet.Numerals;
import org.lowfirst.planning.flight.Leg;
import org.lowfirst.planning.flight.Occupant;
import org.lowfirst.planning.flight.OxygenRule;
import org.lowfirst.planning.flight.Profile;

/** The altitude of a flight against time, from its legs or from its track. */
final class FlightProfile {

    private final Path folder;
    private final Problems problems;
    private List<LegReader.LegLine> legs = List.of();
    private Optional<TrackFile> trackFile = Optional.empty();
    private Place place = Place.START;
    private final List<String> notes = new ArrayList<>();

    FlightProfile(Path folder, Problems problems) {
        this.folder = folder;
        this.problems = problems;
    }

    /** Reads the keys legs and track of a flight file, one of which must be there. */
    void read(Section section) {
        boolean hasTrack = section.find("track").isPresent();
        boolean hasLegs = section.find("legs").isPresent();
        if (hasTrack && hasLegs) {
            problems.error(
                    section.placeOfKey("track"),
                    "The file has both legs and a track. Keep the one that is to be planned, and take the other out.");
        } else if (hasTrack) {
            place = section.placeOf("track");
            section.optional("track", "track", "flight.igc").ifPresent(this::open);
        } else if (hasLegs) {
            LegReader reader = new LegReader(problems);
            legs = new ListReader(
                            "legs",
                            "leg",
                            "name: climb, time: 30 min, from: 1500 ft, to: 12000 ft",
                            FlightLimits.MOST_LEGS,
                            "a flight",
                            problems)
                    .read(section, reader::read);
        } else {
            problems.error(
                    section.place(),
                    "The profile is missing. Add legs: with one line for each leg, or track: with the name of a"
                            + " flight recorder's file (.igc) or a table (.csv).");
        }
    }

    private void open(Scalar name) {
        TrackFile.Opened opened = TrackFile.open(name.text(), folder);
        trackFile = opened.file();
        if (trackFile.isEmpty()) {
            problems.error(name.place(), opened.why());
        }
    }

    Optional<TrackFile> trackFile() {
        return trackFile;
    }

    /** Whether there are problems inside the track file. */
    boolean trackFails() {
        return trackFile.isPresent() && trackFile.get().track().isEmpty();
    }

    /** Symbol of the unit the altitudes of the legs are typed in; empty with a track. */
    Optional<String> altitudeUnit() {
        return legs.stream().map(LegReader.LegLine::unit).findFirst();
    }

    List<String> notes() {
        return notes;
    }

    /** The profile; empty when it does not hold together, and then a problem says why. */
    Optional<Profile> profile(List<Occupant> people, List<OxygenRule> rules) {
        List<Leg> flown = trackFile
                .flatMap(TrackFile::track)
                .map(track -> fromTrack(track, new Thinning(people, rules)))
                .orElseGet(() -> legs.stream().map(LegReader.LegLine::leg).toList());
        Profile.Outcome outcome = Profile.of(flown);
        if (outcome instanceof Profile.Checked checked) {
            return Optional.of(checked.profile());
        }
        Profile.Refused refused = (Profile.Refused) outcome;
        Place at = legs.isEmpty() ? place : legs.get(refused.leg()).place();
        problems.error(at, sentence(refused, flown.get(refused.leg()).name()));
        return Optional.empty();
    }

    private List<Leg> fromTrack(Track track, Thinning thinning) {
        List<Fix> kept = thinning.thin(track.fixes());
        notes.add(String.format(
                Locale.ROOT,
                "The track has %,d fixes; %,d of them carry the profile, so that litres and times change by less than"
                        + " half a per cent.",
                track.fixes().size(),
                kept.size()));
        notes.addAll(track.notes());
        return TrackLegs.of(kept);
    }

    private static String sentence(Profile.Refused refused, String leg) {
        String measured = Numerals.grouped(refused.measured()) + " " + refused.unit();
        String limit = Numerals.grouped(refused.limit()) + " " + refused.unit();
        return switch (refused.problem()) {
            case NO_LEGS -> "The flight has no legs. Add one line for each.";
            case DURATION_NOT_ABOVE_ZERO ->
                "The time of leg " + leg + " (" + measured + ") must be above " + limit + ". Correct it.";
            case FLIGHT_TOO_LONG ->
                "The flight takes " + measured + "; " + limit + " is the most that is planned. Shorten it here.";
            case ALTITUDE_OUT_OF_RANGE ->
                "The altitude of leg " + leg + " (" + measured + ") is beyond " + limit + ". Check the number and its"
                        + " unit.";
            case LEGS_DO_NOT_MEET ->
                "Leg " + leg + " begins at " + measured + ", but the leg before it ends at " + limit
                        + ". Make them meet, or leave out from: to begin where the leg before ends.";
            case TOO_STEEP ->
                "Leg " + leg + " climbs or descends at " + measured + "; " + limit
                        + " is the most that is taken as flown. Check its time and altitudes and their units.";
        };
    }
}
