package org.lowfirst.station.due;

/**
 * What a calendar file says of itself.
 *
 * @param name shown by calendar programs
 * @param domain makes the ids of events unique in the world; the bench's id and host
 * @param alarmDays days before that an alarm is set; 0 for none
 */
public record CalendarFeed(String name, String domain, int alarmDays) {

    public CalendarFeed {
        if (!domain.matches("[A-Za-z0-9.-]+")) {
            throw new IllegalArgumentException(
                    "The domain (" + domain + ") must be letters, digits, dots and hyphens.");
        }
        if (alarmDays < 0) {
            throw new IllegalArgumentException("The alarm (" + alarmDays + " days) must not be below zero.");
        }
    }
}
