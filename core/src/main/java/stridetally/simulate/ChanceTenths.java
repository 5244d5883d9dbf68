package stridetally.simulate;

/** Whether a chance keeps its word: how often it came true in each tenth of it. */
public final class ChanceTenths {
    private static final int TENTHS = 10;

    private final int[] goals = new int[TENTHS];
    private final int[] reached = new int[TENTHS];
    private final double[] said = new double[TENTHS];

    void add(double chance, boolean came) {
        int tenth = Math.min(TENTHS - 1, (int) (chance * TENTHS));
        goals[tenth]++;
        said[tenth] += chance;
        reached[tenth] += came ? 1 : 0;
    }

    /** Goals in a tenth, 0 to 9. */
    public int goals(int tenth) {
        return goals[tenth];
    }

    /** Mean chance said in a tenth that holds goals. */
    public double said(int tenth) {
        return said[tenth] / goals[tenth];
    }

    /** Share that came true in a tenth that holds goals. */
    public double came(int tenth) {
        return (double) reached[tenth] / goals[tenth];
    }
}
