package org.lowfirst.station;

import java.util.List;

/**
 * What the emergency card of a bench says of the place.
 *
 * @param place where this is, as one would tell it over the telephone; empty when nobody said
 * @param meetingPoint where everybody meets; empty when nobody said
 * @param numbers whom to call, first one first
 */
public record LocalHelp(String place, String meetingPoint, List<Contact> numbers) {

    public static final LocalHelp NONE = new LocalHelp("", "", List.of());

    public LocalHelp {
        numbers = List.copyOf(numbers);
    }

    /**
     * @param who who answers
     * @param dial as it is to be dialled
     */
    public record Contact(String who, String dial) {}
}
