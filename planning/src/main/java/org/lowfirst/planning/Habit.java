package org.lowfirst.planning;

/** In which order a bench opens its supplies. */
enum Habit {
    LOWEST_FIRST,
    FULLEST_FIRST
}
