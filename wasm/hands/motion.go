package hands

// Motion is a picture that moves by itself after a press, until it is at its end, or is stopped
// by another press or touch.
type Motion struct {
	// Seconds is how long the whole way takes.
	Seconds float64

	running     bool
	began, from float64
}

// Running tells whether the picture moves.
func (m *Motion) Running() bool { return m.running }

// Press starts the motion from a share of its way, at a time in milliseconds, or stops it. From
// the end it begins anew.
func (m *Motion) Press(now, at float64) {
	m.running = !m.running
	if at >= 1 {
		at = 0
	}
	m.began, m.from = now, at
}

// At is how far the motion has come at a time. At its end it stops.
func (m *Motion) At(now float64) float64 {
	at := m.from + (now-m.began)/(1000*m.Seconds)
	if at >= 1 {
		m.running = false
		return 1
	}
	return max(m.from, at)
}

// Stop stops it.
func (m *Motion) Stop() { m.running = false }
