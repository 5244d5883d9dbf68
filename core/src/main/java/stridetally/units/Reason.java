package stridetally.units;

import stridetally.problem.ProblemCode;

/** Why a value was not taken: finer than the stable problem codes it belongs to. */
public enum Reason {
    MISSING(ProblemCode.VALUE_MISSING),
    UNREADABLE(ProblemCode.VALUE_UNREADABLE),
    /** A word that is none of the known ones. */
    WORD_UNKNOWN(ProblemCode.VALUE_UNREADABLE),
    /** A date where a value belongs; a spreadsheet may have turned 4/5 into one. */
    LOOKS_LIKE_A_DATE(ProblemCode.VALUE_UNREADABLE),
    /** The decimal mark or a thousands mark that the file does not use. */
    MARK_UNCLEAR(ProblemCode.VALUE_UNREADABLE),
    /** O for 0, l for 1. */
    LETTER_FOR_DIGIT(ProblemCode.VALUE_UNREADABLE),
    /** NaN, infinity, 1e3. */
    NOT_A_PLAIN_NUMBER(ProblemCode.VALUE_UNREADABLE),
    /** 4/5 where an amount is expected. */
    FRACTION_FOR_AMOUNT(ProblemCode.VALUE_UNREADABLE),
    NEGATIVE(ProblemCode.VALUE_IMPOSSIBLE),
    NOT_WHOLE(ProblemCode.VALUE_IMPOSSIBLE),
    TOO_LARGE(ProblemCode.VALUE_IMPOSSIBLE),
    /** A share above the whole, such as 80 for 80 %. */
    SHARE_OVER_ONE(ProblemCode.VALUE_IMPOSSIBLE),
    UNIT_UNKNOWN(ProblemCode.UNIT_UNKNOWN),
    UNIT_OF_ANOTHER_KIND(ProblemCode.UNIT_OF_ANOTHER_KIND),
    /** The cell and the unit column say different units. */
    UNITS_DISAGREE(ProblemCode.UNIT_UNCLEAR),
    /** The share could be of tries or of a length. */
    UNIT_NEEDED(ProblemCode.UNIT_UNCLEAR),
    OF_UNREADABLE(ProblemCode.OF_UNREADABLE),
    /** The number of tries given, or the length walked, is needed and not written. */
    OF_NEEDED(ProblemCode.OF_UNREADABLE),
    OF_TOO_SMALL(ProblemCode.OF_TOO_SMALL);

    private final ProblemCode code;

    Reason(ProblemCode code) {
        this.code = code;
    }

    /** The stable code under which the row is set aside. */
    public ProblemCode code() {
        return code;
    }
}
