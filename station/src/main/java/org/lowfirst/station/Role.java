package org.lowfirst.station;

/** What a person does at the bench; one may have several. The words for people are in the message file, by this code. */
public enum Role {
    /** Answers for the bench: its people, its rules, what is set aside. */
    RESPONSIBLE,
    FILLER,
    /** Fills with a second person beside. */
    SUPERVISED,
    /** Has bottles filled. */
    MEMBER,
    /** Keeps the charges. */
    TREASURER
}
