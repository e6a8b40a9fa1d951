package crowdline.flight.body;

/** A direction or a place in the display frame: X to the commentator's right, Y away from the crowd, Z up. */
public record Vec(double x, double y, double z) {
    public static final Vec ZERO = new Vec(0, 0, 0);
    public static final Vec UP = new Vec(0, 0, 1);
    public static final Vec DOWN = new Vec(0, 0, -1);

    /** Component by component. */
    public Vec plus(Vec other) {
        return new Vec(x + other.x, y + other.y, z + other.z);
    }

    /** From {@code other} to this. */
    public Vec minus(Vec other) {
        return new Vec(x - other.x, y - other.y, z - other.z);
    }

    /** As long by a factor. */
    public Vec times(double factor) {
        return new Vec(factor * x, factor * y, factor * z);
    }

    /** The length of this along {@code other}, times the length of that. */
    public double dot(Vec other) {
        return x * other.x + y * other.y + z * other.z;
    }

    public Vec cross(Vec other) {
        return new Vec(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    /** In the unit of its parts. */
    public double length() {
        return Math.sqrt(dot(this));
    }

    public Vec unit() {
        return times(1 / length());
    }

    /** This vector turned about a unit axis by an angle in radians, right-handed. */
    public Vec turnedAbout(Vec axis, double angleRad) {
        double c = Math.cos(angleRad);
        double s = Math.sin(angleRad);
        return times(c).plus(axis.cross(this).times(s)).plus(axis.times(axis.dot(this) * (1 - c)));
    }

    /** The part of this vector at a right angle to a unit direction. */
    public Vec across(Vec direction) {
        return plus(direction.times(-dot(direction)));
    }
}
