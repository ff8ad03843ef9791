package org.lowfirst.app.paper;

import java.util.List;

/**
 * What to do first in an emergency, and whom to call.
 *
 * @param place where this is, as one would tell it over the telephone; empty when nobody said
 * @param meetingPoint where everybody meets; empty when nobody said
 * @param numbers whom to call, first one first
 */
public record EmergencyCard(Heading heading, String place, String meetingPoint, List<LocalNumber> numbers)
        implements Paper {

    public EmergencyCard {
        numbers = List.copyOf(numbers);
    }

    /**
     * @param who who answers
     * @param number as it is to be dialled
     */
    public record LocalNumber(String who, String number) {}
}
