package geom

import "math"

// Vec2 is a point or direction in a plane.
type Vec2 struct{ X, Y float64 }

// Add returns a + b.
func (a Vec2) Add(b Vec2) Vec2 { return Vec2{a.X + b.X, a.Y + b.Y} }

// Sub returns a - b.
func (a Vec2) Sub(b Vec2) Vec2 { return Vec2{a.X - b.X, a.Y - b.Y} }

// Scale returns k a.
func (a Vec2) Scale(k float64) Vec2 { return Vec2{k * a.X, k * a.Y} }

// Dot returns the scalar product.
func (a Vec2) Dot(b Vec2) float64 { return a.X*b.X + a.Y*b.Y }

// Cross returns the z component of a x b: positive where b lies to the left of a.
func (a Vec2) Cross(b Vec2) float64 { return a.X*b.Y - a.Y*b.X }

// Len returns the length of a. Its square must not overflow, which makes math.Hypot
// unnecessary.
func (a Vec2) Len() float64 { return math.Sqrt(a.X*a.X + a.Y*a.Y) }

// Unit returns a scaled to length 1; the zero vector stays zero.
func (a Vec2) Unit() Vec2 {
	l := a.Len()
	if l == 0 {
		return Vec2{}
	}
	return a.Scale(1 / l)
}

// Left returns a turned a quarter turn to the left.
func (a Vec2) Left() Vec2 { return Vec2{-a.Y, a.X} }

// Lerp returns the point a share t of the way from a to b.
func (a Vec2) Lerp(b Vec2, t float64) Vec2 {
	return Vec2{a.X + t*(b.X-a.X), a.Y + t*(b.Y-a.Y)}
}

// Vec3 is a point or direction in space.
type Vec3 struct{ X, Y, Z float64 }

// Add returns a + b.
func (a Vec3) Add(b Vec3) Vec3 { return Vec3{a.X + b.X, a.Y + b.Y, a.Z + b.Z} }

// Sub returns a - b.
func (a Vec3) Sub(b Vec3) Vec3 { return Vec3{a.X - b.X, a.Y - b.Y, a.Z - b.Z} }

// Scale returns k a.
func (a Vec3) Scale(k float64) Vec3 { return Vec3{k * a.X, k * a.Y, k * a.Z} }

// Dot returns the scalar product.
func (a Vec3) Dot(b Vec3) float64 { return a.X*b.X + a.Y*b.Y + a.Z*b.Z }

// Cross returns the vector product a x b.
func (a Vec3) Cross(b Vec3) Vec3 {
	return Vec3{a.Y*b.Z - a.Z*b.Y, a.Z*b.X - a.X*b.Z, a.X*b.Y - a.Y*b.X}
}

// Len returns the length of a.
func (a Vec3) Len() float64 { return math.Sqrt(a.Dot(a)) }

// Lerp returns the point a share t of the way from a to b.
func (a Vec3) Lerp(b Vec3, t float64) Vec3 { return a.Add(b.Sub(a).Scale(t)) }
