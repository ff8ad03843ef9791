package org.lowfirst.app.fitness;

/**
 * One rule of a book in words.
 *
 * @param id its name in the book
 * @param sentence what it says
 * @param source where it comes from, as the book has it
 * @param status how well that text is known
 * @param country where it holds; "any" for good practice
 * @param inForce from which day to which it is applied
 * @param override whether a refusal by it may be set aside
 * @param block the rule as it is written in the book
 */
public record RuleInWords(
        String id,
        String sentence,
        String source,
        String status,
        String country,
        String inForce,
        String override,
        String block) {}
