package plumbleaf.engine.line;

/**
 * Bottom and top of a bay's infill at its two posts, before it has rails and pickets. Plain numbers, elevations in inches.
 *
 * @param stepIn how much higher its top begins than that of the bay before ended
 * @param scribed whether the bottom follows the ground at the wanted gap instead of running straight
 */
record BayShape(
        double bottomFromIn, double bottomToIn, double topFromIn, double topToIn, double stepIn, boolean scribed) {
    BayShape stepped(double higherIn) {
        return new BayShape(bottomFromIn, bottomToIn, topFromIn, topToIn, higherIn, scribed);
    }
}
