<#-- The list of libraries in docs/third-party.md, written by the build. -->
# Libraries and their licences

Written by the build (`mvn -B verify`) from what the libraries say of themselves; the build fails when one comes with a
licence that is not among those allowed in `pom.xml`. Toeline itself is under the Apache License 2.0.

| library | version | licence, as the library names it |
| --- | --- | --- |
<#assign seen = {}>
<#list dependencyMap as e>
<#assign p = e.getKey()>
<#assign key = p.groupId + ":" + p.artifactId>
<#if !(seen[key]??)>
<#assign seen = seen + {key: true}>
| ${key} | ${p.version} | <#list e.getValue() as l>${l}<#if l_has_next>; </#if></#list> |
</#if>
</#list>

What the bytedeco jars carry is under licences of its own:

- FFmpeg: GNU Lesser General Public License, version 3 (built without its GPL parts). Its source is at ffmpeg.org, the way it
  was built in the presets' source; the libraries are separate files that can be replaced.
- OpenCV: Apache License 2.0. OpenBLAS: BSD 3-Clause, and beside it the GNU compilers' runtime libraries (GPL 3 with the
  runtime library exception). JavaCPP: used under the Apache License 2.0.
