namespace LayoutService.Engine.Cutting;

/// <summary>
/// What a solution is judged by, compared in this order: violations, cost, joints, grades, different cut lengths.
/// </summary>
internal readonly record struct BarScore(long Violations, long Cost, long Joints, long Grades, long Lengths) : IComparable<BarScore>
{
    public int CompareTo(BarScore other)
    {
        int order = Violations.CompareTo(other.Violations);
        order = order != 0 ? order : Cost.CompareTo(other.Cost);
        order = order != 0 ? order : Joints.CompareTo(other.Joints);
        order = order != 0 ? order : Grades.CompareTo(other.Grades);
        return order != 0 ? order : Lengths.CompareTo(other.Lengths);
    }
}
