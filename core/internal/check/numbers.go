package check

import (
	"math"
	"reflect"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"
)

// Numbers calls see with every number inside v, those of unexported fields too, and its place. It does not follow
// pointers.
func Numbers(v any, see func(at string, n float64)) { numbers(reflect.ValueOf(v), "", see) }

func numbers(v reflect.Value, at string, see func(at string, n float64)) {
	switch v.Kind() {
	case reflect.Float64:
		see(at, v.Float())
	case reflect.Struct:
		for i := range v.NumField() {
			numbers(v.Field(i), at+"."+v.Type().Field(i).Name, see)
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			numbers(v.Index(i), at+"["+strconv.Itoa(i)+"]", see)
		}
	case reflect.Interface:
		if !v.IsNil() {
			numbers(v.Elem(), at, see)
		}
	}
}

// RequireFinite fails the test where a number inside v is NaN or infinite.
func RequireFinite(t testing.TB, v any) {
	t.Helper()
	Numbers(v, func(at string, n float64) {
		t.Helper()
		require.False(t, math.IsNaN(n) || math.IsInf(n, 0), "%T%s is %g", v, at, n)
	})
}
