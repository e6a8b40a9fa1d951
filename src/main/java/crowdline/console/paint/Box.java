package crowdline.console.paint;

/**
 * A rectangle in user space, cut up as paper is.
 *
 * @param x left edge
 * @param y top edge
 * @param w width, never below 0
 * @param h height, never below 0
 */
public record Box(double x, double y, double w, double h) {
    public Box {
        w = Math.max(0, w);
        h = Math.max(0, h);
    }

    public Box inset(double dx, double dy) {
        return new Box(x + dx, y + dy, w - 2 * dx, h - 2 * dy);
    }

    public Box top(double height) {
        return new Box(x, y, w, Math.min(h, height));
    }

    public Box belowTop(double height) {
        return new Box(x, y + Math.min(h, height), w, h - height);
    }

    public Box bottom(double height) {
        return new Box(x, y + Math.max(0, h - height), w, Math.min(h, height));
    }

    public Box aboveBottom(double height) {
        return new Box(x, y, w, h - height);
    }

    public Box left(double width) {
        return new Box(x, y, Math.min(w, width), h);
    }

    public Box rightOf(double width) {
        return new Box(x + Math.min(w, width), y, w - width, h);
    }

    public Box right(double width) {
        return new Box(x + Math.max(0, w - width), y, Math.min(w, width), h);
    }

    public Box leftOf(double width) {
        return new Box(x, y, w - width, h);
    }

    public double maxX() {
        return x + w;
    }

    public double maxY() {
        return y + h;
    }

    public double midY() {
        return y + h / 2;
    }
}
