package camberwell.statistics;

/** From {@code low} to {@code high}, in the unit of what it is about. */
public record Interval(double low, double high) {

    /** Whether all of it lies within ±{@code reach} of 0. */
    public boolean inside(double reach) {
        return low > -reach && high < reach;
    }

    /** Half its width. */
    public double half() {
        return (high - low) / 2;
    }
}
