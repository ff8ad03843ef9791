package org.lowfirst.gas;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as people type it, with decimal comma or decimal point and with thousands set apart.
 *
 * <ul>
 *   <li>Both signs present: the last one is the decimal sign, the other sets thousands apart (1.450,5 and 1,450.5).
 *   <li>One sign more than once: thousands (1,234,567).
 *   <li>One comma with exactly three digits after it: thousands (2,015), unless the number starts with 0 (0,125).
 *   <li>Any other single comma, and any single point: decimal (2,9 and 2.9 and 2.900).
 *   <li>Spaces of any width between groups of three digits: thousands (1 450).
 * </ul>
 *
 * <p>The third rule is a choice: somebody who types 2,900 for two point nine is misread, so pages show the number back.
 */
record TypedNumber(double value, int end) {

    static final String SPACES = " \u00a0\u2007\u2009\u202f";

    /** No quantity of this trade in any unit comes near it; what is larger is not repeated digit by digit. */
    private static final double TOO_LARGE = 1e15;

    private static final Pattern MANTISSA = Pattern.compile("[-+\u2212]?[0-9.,]+(?:[" + SPACES + "]+[0-9][0-9.,]*)*");
    private static final Pattern EXPONENT = Pattern.compile("[eE]([-+\u2212]?[0-9]{1,3})(?![0-9])");
    private static final Pattern POINT_THOUSANDS = Pattern.compile("[0-9]{1,3}(\\.[0-9]{3})+(,[0-9]*)?");
    private static final Pattern COMMA_THOUSANDS = Pattern.compile("[0-9]{1,3}(,[0-9]{3})+(\\.[0-9]*)?");
    private static final Pattern SINGLE_COMMA_THOUSANDS = Pattern.compile("[1-9][0-9]{0,2},[0-9]{3}");
    private static final Pattern PLAIN = Pattern.compile("[0-9]+[.,]?[0-9]*|[.,][0-9]+");
    private static final Pattern SPACED = Pattern.compile("[0-9]{1,3}( [0-9]{3})+([.,][0-9]*)?");

    /** Thrown inside this package only: where the number stops making sense and why. */
    static final class Unclear extends Exception {

        private static final long serialVersionUID = 1L;
        final int position;

        Unclear(String problem, int position) {
            super(problem);
            this.position = position;
        }
    }

    /**
     * Reads the number at a position.
     *
     * @throws Unclear when there is none or it can be read in no way
     */
    static TypedNumber at(String text, int start) throws Unclear {
        Matcher mantissa = MANTISSA.matcher(text).region(start, text.length());
        if (!mantissa.lookingAt()) {
            throw new Unclear("'" + text.strip() + "' does not start with a number.", start);
        }
        String typed = mantissa.group();
        String plain = plain(typed, start);
        int end = mantissa.end();
        Matcher exponent = EXPONENT.matcher(text).region(end, text.length());
        if (exponent.lookingAt()) {
            plain += "e" + exponent.group(1).replace('\u2212', '-');
            end = exponent.end();
        }
        double value = Double.parseDouble(plain);
        if (Math.abs(value) >= TOO_LARGE) {
            throw new Unclear("'" + text.substring(start, end) + "' is too large a number.", start);
        }
        return new TypedNumber(value, end);
    }

    /** The mantissa in the form a computer reads. */
    private static String plain(String typed, int position) throws Unclear {
        String sign = typed.startsWith("-") || typed.startsWith("\u2212") ? "-" : "";
        String digits = typed.replaceFirst("^[-+\u2212]", "").replaceAll("[" + SPACES + "]+", " ");
        if (digits.indexOf(' ') >= 0) {
            if (!SPACED.matcher(digits).matches()) {
                throw new Unclear("The space in '" + typed + "' does not set thousands apart.", position);
            }
            return sign + digits.replace(" ", "").replace(',', '.');
        }
        boolean bothSigns = digits.indexOf('.') >= 0 && digits.indexOf(',') >= 0;
        boolean several = digits.chars().filter(c -> c == '.' || c == ',').count() > 1;
        if (SINGLE_COMMA_THOUSANDS.matcher(digits).matches()
                || ((several || bothSigns) && COMMA_THOUSANDS.matcher(digits).matches())) {
            return sign + digits.replace(",", "");
        }
        if (several && POINT_THOUSANDS.matcher(digits).matches()) {
            return sign + digits.replace(".", "").replace(',', '.');
        }
        if (PLAIN.matcher(digits).matches()) {
            return sign + digits.replace(',', '.');
        }
        throw new Unclear("The commas and points in '" + typed + "' do not make a number.", position);
    }
}
