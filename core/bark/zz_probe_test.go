package bark
import ("testing";"time";"barkwright/core/design";"barkwright/core/hull";"barkwright/core/geom";"barkwright/core/units";"math")
func TestZZ(t *testing.T){
 for _,set:=range []map[string]float64{{},{"sheetWidth":70*units.Inch},{"beam":36*units.Inch},{"length":230*units.Inch},{"gores":0}} {
 d:=design.Default()
 for k,v:=range set{p,_:=design.Lookup(k);d=p.Set(d,v)}
 h:=hull.New(d); l:=Plan(h)
 var w geom.FlattenWorkspace
 s:=time.Now(); f:=Flatten(h,l,ForPicture,nil,&w); t1:=time.Since(s)
 s=time.Now(); f2:=Flatten(h,l,ForFigures,nil,&w); t2:=time.Since(s)
 s=time.Now(); _=Flatten(h,l,ForFigures,&f2,&w); t3:=time.Since(s)
 o:=l.OnFlat(h,f2)
 t.Log(t1,t2,t3,f.State,f2.State,f.P95,f2.P95,f2.RMS,f2.Where, "len",f2.Length/units.Inch-d.Length/units.Inch,l.FlatLength/units.Inch,"w",o.Needs.Width/units.Inch,l.Needs.Width/units.Inch,f2.Breadth/units.Inch,len(f2.Panels),len(l.Panels),o.Root.WithWaste,l.Root.WithWaste,o.Needs.Sheets,l.Needs.Sheets)
 for _,g:=range f2.Gores{t.Log(g.Width/units.Inch,g.Angle*180/math.Pi,g.Cut/units.Inch,g.AfterLength/units.Inch,g.ForeLength/units.Inch,g.Unequal,g.State)}
 for _,sh:=range []float64{0,.25,.5,.75,1}{ s=time.Now(); r:=f.Sheet.Raise(sh); a:=time.Since(s); s=time.Now(); r2:=f2.Sheet.Raise(sh); t.Log("raise",sh,a,r.Strain,time.Since(s),r2.Strain)}
 s=time.Now(); sc:=StretchCurve(h,13,ForPicture); t.Log("curve",time.Since(s)); for _,c:=range sc{t.Log(c)}
 sheets:=[]Sheet{{40*units.Inch,120*units.Inch},{38*units.Inch,100*units.Inch}}
 s=time.Now(); m:=Makes(d,sheets); t.Log("makes",time.Since(s),m.Largest,m.Length/units.Inch,m.Coverage)
 }
}
