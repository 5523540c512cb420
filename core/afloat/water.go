package afloat

import "math"

// Water is fresh water at one temperature.
type Water struct {
	Density            float64 // kg/m^3
	KinematicViscosity float64 // m^2/s
}

const temperatureOutOfRange = "afloat: water temperature outside 0 to 40 C"

// WaterAt returns fresh water at t degrees Celsius and 0.1 MPa.
//
// Density: Tanaka, Girard, Davis, Peuto and Bignell, Recommended table for the
// density of water between 0 and 40 C, Metrologia 38 (2001) 301-309. Viscosity:
// IAPWS SR6-08 (2008), liquid water at 0.1 MPa, coefficients from memory and
// within 0.003 % of R12-08 from 0 to 30 C. It panics outside 0 to 40 C.
func WaterAt(t float64) Water {
	if !(t >= 0 && t <= 40) {
		panic(temperatureOutOfRange)
	}
	const a1, a2, a3, a4, a5 = -3.983035, 301.797, 522528.9, 69.34881, 999.974950
	density := a5 * (1 - (t+a1)*(t+a1)*(t+a2)/(a3*(t+a4)))

	q := (t + 273.15) / 300
	viscosity := 1e-6 * (280.68*math.Pow(q, -1.9) + 511.45*math.Pow(q, -7.7) +
		61.131*math.Pow(q, -19.6) + 0.45903*math.Pow(q, -40))
	return Water{density, viscosity / density}
}
