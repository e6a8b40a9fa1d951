package crowdline.sheet.page;

/** A rectangle on a page, points from its upper left corner. */
public record Area(double x, double y, double width, double height) {
    public double right() {
        return x + width;
    }

    public double bottom() {
        return y + height;
    }

    public Area inset(double by) {
        return new Area(x + by, y + by, width - 2 * by, height - 2 * by);
    }

    public Area moved(double dx, double dy) {
        return new Area(x + dx, y + dy, width, height);
    }

    /** Whether the other lies within, up to a hundredth of a point. */
    public boolean holds(Area other) {
        double e = 0.01;
        return other.x >= x - e && other.y >= y - e && other.right() <= right() + e && other.bottom() <= bottom() + e;
    }

    /** Whether they share more than a hundredth of a point. */
    public boolean overlaps(Area other) {
        double e = 0.01;
        return other.x < right() - e && x < other.right() - e && other.y < bottom() - e && y < other.bottom() - e;
    }
}
