@echo off
rem Builds on first use, then runs.
setlocal
set "TOELINE_DIR=%~dp0"
where java >nul 2>nul || (echo toeline needs Java 17 or later on the path 1>&2 & exit /b 1)
if not exist "%TOELINE_DIR%target\toeline.jar" goto build
if not exist "%TOELINE_DIR%target\lib" goto build
goto run
:build
where mvn >nul 2>nul || (echo toeline builds itself on first use, which needs Maven 3.8 or later on the path 1>&2 & exit /b 1)
echo building toeline, once ... 1>&2
pushd "%TOELINE_DIR%"
call mvn -B -q -DskipTests -Dquick -Dspotless.check.skip package 1>&2
if errorlevel 1 (popd & exit /b 1)
popd
:run
java "-Dtoeline.home=%TOELINE_DIR%." -Dfile.encoding=UTF-8 -XX:+UseSerialGC -cp "%TOELINE_DIR%target\toeline.jar;%TOELINE_DIR%target\lib\*" org.toeline.Main %*
exit /b %errorlevel%
