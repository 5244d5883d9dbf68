package stridetally.scoring;

/** On which side of a capped value the true one lies. */
public enum Bound {
    AT_LEAST(">="),
    AT_MOST("<=");

    private final String sign;

    Bound(String sign) {
        this.sign = sign;
    }

    /** The sign to print before the value. */
    public String sign() {
        return sign;
    }
}
